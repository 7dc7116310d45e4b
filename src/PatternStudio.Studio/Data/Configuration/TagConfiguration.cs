using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Tags;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class TagConfiguration : IEntityTypeConfiguration<Tag>
{
    public void Configure(EntityTypeBuilder<Tag> tag)
    {
        tag.ToTable("Tags");
        tag.Property(it => it.Id).ValueGeneratedNever();
        tag.Property(it => it.Name).HasMaxLength(Tag.NameLength);
        tag.Property(it => it.NameKey).HasMaxLength(Tag.NameLength);
        tag.HasOne<Studio>().WithMany().HasForeignKey(it => it.StudioId).OnDelete(DeleteBehavior.Restrict);
        tag.HasIndex(it => new { it.StudioId, it.NameKey }).IsUnique();
    }
}

internal sealed class DesignTagConfiguration : IEntityTypeConfiguration<DesignTag>
{
    public void Configure(EntityTypeBuilder<DesignTag> worn)
    {
        worn.ToTable("DesignTags");
        worn.HasKey(it => new { it.DesignId, it.TagId });
        worn.HasOne<Design>().WithMany().HasForeignKey(it => it.DesignId).OnDelete(DeleteBehavior.Cascade);
        worn.HasOne<Tag>().WithMany().HasForeignKey(it => it.TagId).OnDelete(DeleteBehavior.Cascade);
    }
}
