using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class PhotoConfiguration : IEntityTypeConfiguration<Photo>
{
    public void Configure(EntityTypeBuilder<Photo> photo)
    {
        photo.ToTable("Photos");
        photo.Property(it => it.Id).ValueGeneratedNever();
        photo.HasOne<Studio>().WithMany().HasForeignKey(it => it.StudioId).OnDelete(DeleteBehavior.Restrict);
    }
}
